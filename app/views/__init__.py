"""The Qt screens. A view paints a snapshot and owns no truth."""
