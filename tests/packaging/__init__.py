"""What is handed out: the wheel, the bundle's parts, the entries of a desktop."""
