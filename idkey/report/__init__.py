"""Words and pages: verdict sentences, rationale, labels."""
