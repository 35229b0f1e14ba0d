"""Says what an animal sold under a shop label really is, and how far the evidence goes."""

__version__ = "0.1.0"
