/**
 * Finds places of pans, backs, pegs, grips or any free pins that suit the whole crew at once.
 *
 * <p>In: a {@link org.longlow.constraints.layout.Layout}, the names of what may move, and {@link
 * org.longlow.constraints.suit.SuitSettings}. Out: a {@link
 * org.longlow.constraints.suit.SuitReport}: the best few places, what each trades, what holds each
 * person, and the least adjustment travel where no one place does.
 *
 * <p>Ties and limits of the layout hold at every place looked at; its geometric wishes keep their
 * say. Within that, the sum of squares of strays is made least: joint angles outside their comfort
 * bands, sink, hold and head rest count once; findings that would fail (reach, gaps, sight, foot on
 * the ground, lean, clearance, share of weight) count many times more; and of equally good places
 * the nearest to the present one wins. Verdicts always come from {@link
 * org.longlow.constraints.study.Study}; the search itself measures only what can change.
 *
 * <p>The method finds the best place that lies downhill from one of several starts, not the best
 * there is. Starts come from a fixed sequence and do not depend on each other, so the same layout
 * gives the same answer on any machine and with any number of threads. Lengths mm, angles of
 * readings deg.
 */
package org.longlow.constraints.suit;
