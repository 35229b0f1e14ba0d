"""Parts of a tarantula, drawn from proportions."""
