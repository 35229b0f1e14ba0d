"""Pictures as evidence: taking in, keeping, measuring, colour. Pillow and numpy, no window."""
