"""The Qt window: one state and one view per screen."""
