/**
 * What share of a whole population fits a machine, what stops the rest, and what adjustment would
 * take them in.
 *
 * <p>In: a solved layout and a {@link org.longlow.constraints.fit.Crowd}, sampled from the survey
 * or measured. Each of them sits alone on the rider's seat of the machine as its own crew has it,
 * and is judged by {@link org.longlow.constraints.check.BodyChecks}. Person i depends on the seed
 * and i alone, and what is found is put together in their order, so any number of threads gives the
 * same answer. Lengths mm, masses kg, angles of adjustment deg.
 */
package org.longlow.constraints.fit;
