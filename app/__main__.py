"""The one way in: `python -m app` and the console script `pacewright`."""

import os
import sys
from collections.abc import Sequence

from app.cli import doors
from app.domain.errors import PacewrightError


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; exit status 0 done, 1 a plain sentence on stderr, 2 the words did not parse.

    Every file and folder that is made is its owner's alone.
    """
    os.umask(0o077)
    words = sys.argv[1:] if arguments is None else list(arguments)
    try:
        return doors.run(words)
    except PacewrightError as error:
        sys.stderr.write(f"{error}\n")
        return 1
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main())
