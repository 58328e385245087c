package org.longlow.sketcher.desk;

import java.util.List;
import org.longlow.rider.geom.PointMm;

/** A drag under way, as it was at the last answer. */
public record DragNow(String pin, PointMm begin, List<String> words, List<String> stops) {}
