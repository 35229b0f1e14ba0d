"""What every command says about its exit codes; stands in --help and in the README."""

DONE, OPEN, WRONG_USE, MISTAKES, FAILED = range(5)

EXIT_CODES = f"""\
Exit codes:
  {DONE}  done; for identify: the evidence decides
  {OPEN}  identify: the evidence does not decide yet; verify: something does not match
  {WRONG_USE}  wrong use: an unknown command, key, character or state
  {MISTAKES}  the key has mistakes
  {FAILED}  the machine is in the way: a file cannot be read or written, something is missing"""
