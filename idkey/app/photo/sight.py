"""Which part of a picture is seen, and how large: plain arithmetic, without a window."""

from dataclasses import dataclass, replace

from idkey.photo.marks import Point

LARGEST = 32.0
"""Most screen pixels for one pixel of the picture."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sight:
    """A picture seen through a window.

    Attributes:
        picture: Width and height of the picture, in its pixels.
        window: Width and height of the window, in screen pixels.
        centre: Point of the picture in the middle of the window.
        scale: Screen pixels per pixel of the picture.
    """

    picture: tuple[float, float]
    window: tuple[float, float]
    centre: Point
    scale: float

    @classmethod
    def whole(cls, picture: tuple[float, float], window: tuple[float, float]) -> "Sight":
        """The whole picture, as large as it fits."""
        scale = min(window[0] / picture[0], window[1] / picture[1])
        centre = (picture[0] / 2, picture[1] / 2)
        return cls(picture=picture, window=window, centre=centre, scale=max(scale, 1e-6))

    @property
    def fit(self) -> float:
        """Scale at which the whole picture fits."""
        return Sight.whole(self.picture, self.window).scale

    @property
    def zoom(self) -> float:
        """Scale over that at which the whole picture fits."""
        return self.scale / self.fit

    def on_screen(self, point: Point) -> Point:
        """Where a point of the picture is in the window."""
        return (
            (point[0] - self.centre[0]) * self.scale + self.window[0] / 2,
            (point[1] - self.centre[1]) * self.scale + self.window[1] / 2,
        )

    def in_picture(self, place: Point) -> Point:
        """Which point of the picture is at a place of the window."""
        return (
            (place[0] - self.window[0] / 2) / self.scale + self.centre[0],
            (place[1] - self.window[1] / 2) / self.scale + self.centre[1],
        )

    def inside(self, point: Point) -> Point:
        """The nearest point of the picture."""
        return (
            min(max(point[0], 0.0), self.picture[0]),
            min(max(point[1], 0.0), self.picture[1]),
        )

    def zoomed(self, factor: float, about: Point) -> "Sight":
        """Larger or smaller, with the place `about` of the window kept where it is."""
        scale = min(max(self.scale * factor, self.fit), max(LARGEST, self.fit))
        held = self.in_picture(about)
        moved = replace(self, scale=scale)
        seen = moved.in_picture(about)
        centre = (moved.centre[0] + held[0] - seen[0], moved.centre[1] + held[1] - seen[1])
        return replace(moved, centre=centre).kept()

    def panned(self, across: float, down: float) -> "Sight":
        """The picture moved by so many screen pixels."""
        centre = (self.centre[0] - across / self.scale, self.centre[1] - down / self.scale)
        return replace(self, centre=centre).kept()

    def resized(self, window: tuple[float, float]) -> "Sight":
        """Through a window of another size; what fitted whole fits whole again."""
        if self.zoom <= 1.0 + 1e-9:
            return Sight.whole(self.picture, window)
        moved = replace(self, window=window)
        return replace(moved, scale=max(self.scale, moved.fit)).kept()

    def showing(self, point: Point, margin: float = 40.0) -> "Sight":
        """Moved just so far that a point is in the window."""
        x, y = self.on_screen(point)
        room = (min(margin, self.window[0] / 3), min(margin, self.window[1] / 3))
        across = min(max(x, room[0]), self.window[0] - room[0]) - x
        down = min(max(y, room[1]), self.window[1] - room[1]) - y
        return self if across == down == 0 else self.panned(across, down)

    def kept(self) -> "Sight":
        """Moved back so that no more than needed lies beside the picture."""
        centre = []
        for size, middle, room in zip(self.picture, self.centre, self.window, strict=True):
            half = room / self.scale / 2
            centre.append(size / 2 if 2 * half >= size else min(max(middle, half), size - half))
        return replace(self, centre=(centre[0], centre[1]))

    def like(self, other: "Sight") -> "Sight":
        """This picture, seen as large and at the same place as `other` shows its own."""
        centre = (
            other.centre[0] / other.picture[0] * self.picture[0],
            other.centre[1] / other.picture[1] * self.picture[1],
        )
        return replace(self, scale=self.fit * other.zoom, centre=centre).kept()
