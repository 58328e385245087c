package org.longlow.sketcher.photo;

/** Why a photo cannot be shown, and what to do about it. The layout is sound all the same. */
public final class UnreadPhoto extends Exception {

  private static final long serialVersionUID = 1L;

  /**
   * @param fault such as does not exist
   * @param remedy such as put the photo beside the layout file
   */
  UnreadPhoto(String fault, String remedy) {
    super(remedy.isEmpty() ? fault : fault + "; " + remedy);
  }
}
