"""Words and pages."""
