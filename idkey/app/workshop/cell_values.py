"""What a taxon shows, as controls: ticks for states, fields for a range."""

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, QSize, Qt, Signal, Slot
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QCheckBox, QGridLayout, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.rendering import on_plate
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.formats.plain import number
from idkey.model.character import Character, State
from idkey.model.key import Key
from idkey.model.score import Often, Shows, Spans

translate = QCoreApplication.translate

PICTURE = 44
"""Side of the drawing of a state, in pixels at 100 %."""

Share = Often | float | None


def often_words(share: Share) -> str:
    """How often a state occurs, in words."""
    if isinstance(share, float):
        return f"{share * 100:.3g} %"
    return {
        None: translate("workshop", "it occurs"),
        Often.ALWAYS: translate("workshop", "always"),
        Often.USUALLY: translate("workshop", "usually"),
        Often.SOMETIMES: translate("workshop", "sometimes"),
        Often.RARELY: translate("workshop", "rarely"),
    }[share]


class StateTicks(QWidget):
    """A tick for each state, and how often it occurs.

    Args:
        character: The character.
        theme: The look.

    Signals:
        changed(value: Shows): The person ticked or weighed a state; one at least is ticked.
        emptied(): No state is ticked.
    """

    changed = Signal(object)
    emptied = Signal()

    def __init__(self, character: Character, theme: Theme) -> None:
        super().__init__()
        self._ticks: dict[str, QCheckBox] = {}
        self._often: dict[str, Choice] = {}
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(theme.px(6))
        grid.setVerticalSpacing(theme.px(2))
        grid.setColumnStretch(0, 1)
        for row, state in enumerate(character.states):
            tick = self._tick(state, theme)
            often = Choice(
                translate("workshop", "How often: {state}").format(state=state.label), theme
            )
            often.offer((often_words(share), share) for share in (None, *Often))
            often.activated.connect(self._on_activated)
            keep = often.sizePolicy()
            keep.setRetainSizeWhenHidden(True)
            often.setSizePolicy(keep)
            self._often[state.id] = often
            grid.addWidget(tick, row, 0)
            grid.addWidget(often, row, 1)

    def show_value(self, value: Shows | None) -> None:
        """Show what is ticked; None ticks nothing."""
        states: Mapping[str, Share] = {} if value is None else value.states
        for own, tick in self._ticks.items():
            tick.setChecked(own in states)
            often, share = self._often[own], states.get(own)
            words = [(often_words(one), one) for one in (None, *Often)]
            if isinstance(share, float):
                words.append((often_words(share), share))
            if often.count() != len(words) or isinstance(share, float):
                often.offer(words)
            often.choose(share)
            often.setVisible((own in states and len(states) > 1) or share is not None)

    def show_pictures(self, key: Key, character: Character, desk: Desk) -> None:
        """Show the drawing of each state that has one."""
        size = QSize(desk.theme.px(PICTURE), desk.theme.px(PICTURE))
        for state in character.states:
            ratio = self.devicePixelRatioF()
            drawn = desk.pictures.tile(key, character, state, size=size, ratio=ratio)
            if drawn is not None:
                self._ticks[state.id].setIcon(
                    QIcon(on_plate(drawn, size, ratio=ratio, theme=desk.theme))
                )
                self._ticks[state.id].setIconSize(size)

    def focus_first(self) -> None:
        """Put the focus on the first tick that is set, or the first."""
        ticks = list(self._ticks.values())
        chosen = [tick for tick in ticks if tick.isChecked()] or ticks
        chosen[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def _tick(self, state: State, theme: Theme) -> QCheckBox:
        tick = QCheckBox(state.label.replace("&", "&&"))
        tick.setToolTip(tip(f"{state.label}\n{state.id}"))
        tick.setMinimumWidth(1)
        tick.clicked.connect(self._on_clicked)
        self._ticks[state.id] = tick
        return tick

    @Slot()
    def _on_clicked(self) -> None:
        self._tell()

    @Slot(int)
    def _on_activated(self, _: int) -> None:
        self._tell()

    def _tell(self) -> None:
        ticked = [own for own, tick in self._ticks.items() if tick.isChecked()]
        if not ticked:
            self.emptied.emit()
            return
        self.changed.emit(Shows({own: self._often[own].chosen for own in ticked}))


class NumberFields(QWidget):
    """Lowest and highest value, mean, spread and number of animals.

    Args:
        character: The character.
        theme: The look.

    Signals:
        changed(value: Spans): The person typed another range.
        emptied(): All fields are empty.
    """

    changed = Signal(object)
    emptied = Signal()

    def __init__(self, character: Character, theme: Theme) -> None:
        super().__init__()
        titles = {
            "low": translate("workshop", "from"),
            "high": translate("workshop", "to"),
            "mean": translate("workshop", "mean"),
            "sd": translate("workshop", "standard deviation"),
            "n": translate("workshop", "animals measured"),
        }
        self.fields: dict[str, QLineEdit] = {}
        self._shown: Spans | None = None
        self.wrong = caption(tone="doubt")
        self.wrong.hide()
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setVerticalSpacing(theme.px(3))
        for row, (name, title) in enumerate(titles.items()):
            field = QLineEdit()
            field.setAccessibleName(title)
            field.editingFinished.connect(self._on_edited)
            self.fields[name] = field
            grid.addWidget(caption(title, wraps=False), row, 0)
            grid.addWidget(field, row, 1)
            grid.addWidget(caption("" if name == "n" else character.unit, "soft"), row, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(grid)
        column.addWidget(self.wrong)

    @property
    def half(self) -> tuple[str, ...]:
        """What is typed and is no range; empty when there is nothing like that."""
        texts = tuple(field.text() for field in self.fields.values())
        return () if self.wrong.isHidden() else texts

    def restore(self, half: tuple[str, ...]) -> None:
        """Show again what was typed and is no range."""
        for field, text in zip(self.fields.values(), half, strict=True):
            field.setText(text)
        self._on_edited()

    def show_value(self, value: Spans | None) -> None:
        """Show a range; None empties the fields."""
        self._shown = value
        self.wrong.hide()
        for name, field in self.fields.items():
            own = None if value is None else getattr(value, name)
            field.setText("" if own is None else repr(number(own)))

    def focus_first(self) -> None:
        """Put the focus on the first field."""
        self.fields["low"].setFocus(Qt.FocusReason.OtherFocusReason)
        self.fields["low"].selectAll()

    def flush(self) -> None:
        """Tell the range that is typed, if it is another."""
        self._on_edited()

    @Slot()
    def _on_edited(self) -> None:
        try:
            value = self._value()
        except ValueError as err:
            self.wrong.setText(translate("workshop", "This is no range: {why}.").format(why=err))
            self.wrong.show()
            return
        self.wrong.hide()
        if value is None:
            self.emptied.emit()
        elif value != self._shown:
            self.changed.emit(value)

    def _value(self) -> Spans | None:
        said: dict[str, float | None] = {}
        for name, field in self.fields.items():
            text = field.text().strip().replace(",", ".")
            said[name] = float(text) if text else None
        if not any(value is not None for value in said.values()):
            return None
        count = said.pop("n")
        if count is not None and (count != int(count) or count < 1):
            raise ValueError("animals are counted in whole numbers")
        return Spans(**said, n=None if count is None else int(count))
