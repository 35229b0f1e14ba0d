"""Pure reasoning over a key and a case: no files, clock, chance, threads or Qt."""
