/**
 * Posture of the rider: where the joints are in the side view and how far out, how they feel, what
 * they see and reach.
 *
 * <p><b>Angles</b>, all rad inside, zero and sign as stated in {@link
 * org.longlow.rider.pose.JointAngles}. <b>Solving</b>: {@link org.longlow.rider.pose.PoseSolver} is
 * closed form but for one bounded scalar root (how ankle and knee share a stretch); the knee always
 * lies up or forward of the line hip to foot, the elbow always down or behind the line shoulder to
 * grip, both lines in space ({@link org.longlow.rider.pose.JointOffsets}); so nothing flips when a
 * target creeps. A target out of reach is an answer ({@link
 * org.longlow.rider.pose.PoseResult.Short}), never an exception.
 *
 * <p><b>Comfort</b>: no published comfort-angle set for reclined, feet-forward motorcyclists was
 * found; the bands are judgements built on car-driver, reclined-passenger and neutral-posture data,
 * see {@link org.longlow.rider.pose.ComfortBands#CAUTION}.
 *
 * <p><b>Flesh</b>: {@link org.longlow.rider.pose.Figure} gives outlines (JTS, mm) with lateral
 * intervals for gap checks. One straight trunk link: better at 45 degrees of recline than at 20.
 */
package org.longlow.rider.pose;
