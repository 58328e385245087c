/**
 * The geometric solver: positions from ties, limits and wishes, and an account of what they leave
 * open.
 *
 * <p><b>What it solves.</b> Unknowns are plain numbers (pin coordinates in mm, free measures in
 * their own unit). In this order of rank: {@link org.longlow.constraints.solve.problem.SolverTie
 * ties} hold exactly, {@link org.longlow.constraints.solve.problem.SolverLimit limits} hold as
 * inequalities, {@link org.longlow.constraints.solve.problem.SolverWish wishes} are minimised as a
 * weighted sum of squares in the room that is left, and what is still open stays as near as
 * possible (in scaled variables) to the anchor values, which are the start values unless said
 * otherwise.
 *
 * <p><b>How.</b> The layout is split into connected groups, and each group into blocks that can be
 * solved one after the other: what ties settle first, pin after pin, then what they leave open. A
 * group whose blocks do not give a plain success is solved whole. In each block or group every step
 * is a least-change step on the linearised ties: the matrix {@code A A' + C} (A: scaled Jacobian of
 * ties and wishes, C: a tiny compliance for ties, a small one for wishes) is factorised by a sparse
 * Cholesky method whose ordering and pattern are found once per structure. Limits enter by a dual
 * active-set method (Goldfarb and Idnani, A numerically stable dual method for solving strictly
 * convex quadratic programs, Mathematical Programming 27, 1983) on top of that factor. Damping
 * follows Levenberg and Marquardt; where curvature matters, truncated Newton steps use second
 * derivatives of the Lagrangian.
 *
 * <p><b>What it reports.</b> {@link org.longlow.constraints.solve.Solver#solve} gives positions and
 * a status; {@link org.longlow.constraints.solve.Solver#diagnose} adds rank, freedoms, redundant
 * ties, the smallest contradiction and near-singular layouts. An odd layout never throws and never
 * gives a NaN; only a broken call does (a variable index that does not exist, a start value that is
 * not finite).
 *
 * <p><b>How long.</b> Work is counted, not timed ({@link
 * org.longlow.constraints.solve.problem.SolverSettings#workAllowed}): when it is spent before it is
 * clear whether ties and limits can hold the answer is {@code NOT_DECIDED}, which never counts as
 * holding. Limits that are costly to evaluate, as gaps to a seated person, get shorter searches;
 * where they cannot hold, all else is kept and they alone give way.
 *
 * <p><b>Units.</b> Relations give mm (angles are turned into the arc at a stated radius), so that
 * tolerances in mm mean something. The reported residual of a relation is its value divided by the
 * length of its gradient where that exceeds 1: the distance by which points would have to move.
 */
package org.longlow.constraints.solve;
