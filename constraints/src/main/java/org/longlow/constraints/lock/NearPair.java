package org.longlow.constraints.lock;

import org.longlow.constraints.space.Convex;

/**
 * Two pieces that may be near between two turns.
 *
 * @param one what turns, and its middle
 * @param past the other, and its middle
 * @param from the first of these turns, left positive, rad
 * @param to the last of them, rad
 * @param reachMm how fast their gap can change, mm for each rad
 */
record NearPair(
    Turned one,
    double[] middle,
    Convex past,
    double[] pastMiddle,
    double from,
    double to,
    double reachMm) {}
