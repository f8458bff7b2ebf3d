"""The athlete's screen: led from ready to finished."""
