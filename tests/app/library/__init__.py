"""The library: real keys, real files, a real widget."""
