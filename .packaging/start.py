"""Where the bundle starts; the same as `python -m idkey`."""

import sys

from idkey.__main__ import main

sys.exit(main())
