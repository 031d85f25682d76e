"""``python -m scupper``: the command line."""

from scupper.command_line import main

if __name__ == "__main__":
    raise SystemExit(main())
