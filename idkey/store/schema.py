"""The tables of the record book, as the newest migration leaves them.

`case_words`, the word index for searching, is not listed here: it is an FTS5 table in SQLite
and a table of text vectors in PostgreSQL, and only `idkey.store.words` touches it.
"""

from sqlalchemy import (
    BigInteger,
    Column,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)

HEAD = "0004"
"""The newest migration; a book that says a higher number was written by a newer program."""

metadata = MetaData()

chain = Table(
    "chain",
    metadata,
    Column("entry", BigInteger, primary_key=True, autoincrement=False),
    Column("kind", Text, nullable=False),
    Column("case_id", Text, nullable=False),
    Column("number", Integer, nullable=False),
    Column("at", Text, nullable=False),
    Column("by", Text, nullable=False),
    Column("content", Text, nullable=False),
    Column("content_digest", Text, nullable=False),
    Column("previous", Text, nullable=False),
    Column("digest", Text, nullable=False),
    UniqueConstraint("case_id", "kind", "number", name="uq_chain_case"),
)
"""Everything ever saved, append-only; each row carries the digest of the row before it."""

chain_end = Table(
    "chain_end",
    metadata,
    Column("one", Integer, primary_key=True, autoincrement=False),
    Column("entry", BigInteger, nullable=False),
    Column("digest", Text, nullable=False),
)
"""The last entry of the chain, in one row that writers lock."""

cases = Table(
    "cases",
    metadata,
    Column("id", Text, primary_key=True),
    Column("revision", Integer, nullable=False),
    Column("entry", BigInteger, nullable=False),
    Column("touched", BigInteger, nullable=False),
    Column("key", Text, nullable=False),
    Column("label", Text, nullable=False),
    Column("label_id", Text, nullable=False),
    Column("supplier", Text, nullable=False),
    Column("day", Text, nullable=False),
    Column("kind", Text, nullable=False),
    Column("level", Text, nullable=False),
    Column("name", Text, nullable=False),
    Column("cautions", Text, nullable=False),
    Column("findings", Integer, nullable=False),
    Column("by", Text, nullable=False),
    Column("at", Text, nullable=False),
    Index("ix_cases_touched", "touched", unique=True),
    Index("ix_cases_label_id", "label_id", "level"),
    Index("ix_cases_day", "day"),
    Index("ix_cases_kind", "kind", "touched"),
)
"""The newest revision of each case in short, for lists; can be made again from the chain."""

case_taxa = Table(
    "case_taxa",
    metadata,
    Column("case_id", Text, ForeignKey("cases.id"), primary_key=True),
    Column("taxon", Text, primary_key=True),
    Index("ix_case_taxa_taxon", "taxon"),
)
"""Taxa that the verdict of the newest revision names."""

sales = Table(
    "sales",
    metadata,
    Column("case_id", Text, ForeignKey("cases.id"), primary_key=True),
    Column("number", Text, primary_key=True),
    Column("entry", BigInteger, nullable=False),
    Column("buyer", Text, nullable=False),
    Column("salt", Text, nullable=False),
    Index("ix_sales_number", "number"),
)
"""Sales of a case; the chain holds the content, this the buyer, who can be erased."""

drafts = Table(
    "drafts",
    metadata,
    Column("station", Text, primary_key=True),
    Column("name", Text, primary_key=True),
    Column("value", Text, nullable=False),
)
"""Text not saved yet, per place of work."""

settings = Table(
    "settings",
    metadata,
    Column("station", Text, primary_key=True),
    Column("name", Text, primary_key=True),
    Column("value", Text, nullable=False),
)
"""Preferences and the state of windows, per place of work."""

people = Table(
    "people",
    metadata,
    Column("initials", Text, primary_key=True),
    Column("name", Text, nullable=False),
    Column("note", Text, nullable=False),
    Column("active", Integer, nullable=False),
)
"""Who determines and saves; by initials or alias, a full name is not needed."""

suppliers = Table(
    "suppliers",
    metadata,
    Column("words", Text, primary_key=True),
    Column("name", Text, nullable=False),
    Column("note", Text, nullable=False),
)
"""Suppliers under one spelling each; `words` is the name without case, accents and signs."""

intakes = Table(
    "intakes",
    metadata,
    Column("case_id", Text, ForeignKey("cases.id"), primary_key=True),
    Column("number", Text, nullable=False),
    Column("entry", BigInteger, nullable=False),
    Index("ix_intakes_number", "number"),
)
"""How an animal came in; the chain holds the content."""

opinions = Table(
    "opinions",
    metadata,
    Column("case_id", Text, ForeignKey("cases.id"), primary_key=True),
    Column("of_case", Text, ForeignKey("cases.id"), nullable=False),
    Column("entry", BigInteger, nullable=False),
    Index("ix_opinions_of_case", "of_case"),
)
"""Cases that are a second, blind determination of the animal of another case."""

rationales = Table(
    "rationales",
    metadata,
    Column("digest", Text, primary_key=True),
    Column("case_id", Text, nullable=False),
    Column("revision", Integer, nullable=False),
    Column("sale", Text, nullable=False),
    Column("entry", BigInteger, nullable=False),
    Index("ix_rationales_case_id", "case_id"),
)
"""Documents handed out, by the SHA-256 of their bytes."""

drill_trials = Table(
    "drill_trials",
    metadata,
    Column("person", Text, primary_key=True),
    Column("number", BigInteger, primary_key=True, autoincrement=False),
    Column("key", Text, nullable=False),
    Column("content", Text, nullable=False),
    Column("digest", Text, nullable=False),
)
"""What people answered in drills, append-only; each row seals the person's row before it."""
