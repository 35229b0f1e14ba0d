"""Stories: the whole program, driven as a person drives it."""
