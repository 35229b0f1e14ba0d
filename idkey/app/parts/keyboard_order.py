"""The place of late comers in the order of the keyboard."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget


def put_in_turn(inside: QWidget, late: QWidget) -> None:
    """Let Tab reach a widget after what stands in `inside` before it.

    Qt puts whatever comes into a window that is already there at the very end of its order.

    Args:
        inside: Where it stands.
        late: A widget inside it.
    """
    if inside.window() is inside:
        return  # not in a window yet: the order of making is the order of the keyboard
    earlier = [one for one in inside.findChildren(QWidget) if _reached(one)]
    stops = [one for one in (late, *late.findChildren(QWidget)) if _reached(one)]
    earlier = [one for one in earlier if one not in stops]
    last = earlier[-1] if earlier else _before(inside)
    for one in stops:
        QWidget.setTabOrder(last, one)
        last = one


def _reached(one: QWidget) -> bool:
    return bool(one.focusPolicy() & Qt.FocusPolicy.TabFocus)


def _before(inside: QWidget) -> QWidget:
    """What Tab reaches before `inside`: an order is told of widgets that take the focus only."""
    one = inside.previousInFocusChain()
    while one is not None and one is not inside and not _reached(one):
        one = one.previousInFocusChain()
    return one or inside
