"""Parts of a leafy sprig, drawn from proportions."""
