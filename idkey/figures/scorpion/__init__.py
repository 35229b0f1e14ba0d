"""Parts of a scorpion, drawn from proportions."""
