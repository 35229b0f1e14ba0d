"""Pieces a page is laid out from: sheet, prose, table, marks. Lengths are in mm, type in pt."""
