"""The library: the keys that are here, their age, sources and coverage."""
