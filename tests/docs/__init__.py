"""The manual: it can be built, its commands run, its figures are those that were measured."""
