package org.longlow.sketcher.picture;

/** The layers of an elevation, from the bottom up. */
public enum PictureLayer {
  GROUND("ground", "Ground"),
  WHEELS("wheels", "Wheels"),
  RUNS("runs", "Chains and belts"),
  FRAME("frame", "Frame and suspension"),
  ENGINE("engine", "Engine and other masses"),
  EXHAUST("exhaust", "Exhaust"),
  TANK("tank", "Tank"),
  SEAT("seat", "Seat"),
  GHOSTS("ghosts", "Others of the crew"),
  PERSON("person", "Person"),
  CONTROLS("controls", "Grips and pegs"),
  BODY("body", "Cowls"),
  SCREEN("screen", "Screen"),
  LAMPS("lamps", "Lamps"),
  HIDDEN("hidden", "Hidden edges"),
  MOVED("moved", "Moved sections"),
  AXES("axes", "Axes, centre lines and centres"),
  SIGHT("sight", "Sight line"),
  CHOSEN("chosen", "Chosen"),
  KEPT("kept", "Kept dimensions"),
  NAMES("names", "Names"),
  DIMENSIONS("dimensions", "Dimensions"),
  NOTES("notes", "Notes"),
  PINS("pins", "Pins"),
  FINDINGS("findings", "Findings");

  private final String id;
  private final String title;

  PictureLayer(String id, String title) {
    this.id = id;
    this.title = title;
  }

  /** Returns the layer's id in drawings and files. */
  public String id() {
    return id;
  }

  /** Returns what a person calls it. */
  public String title() {
    return title;
  }
}
