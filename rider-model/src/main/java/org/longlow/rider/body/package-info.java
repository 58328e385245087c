/**
 * The rider's body: survey statistics, one person's measures, and the skeleton of the side view.
 *
 * <p>In: sex, stature (1200 to 2200 mm), mass (30 to 200 kg) and any measured values by survey
 * name. Out: {@link org.longlow.rider.body.BodyMeasures} (every measurement, mm), {@link
 * org.longlow.rider.body.Body} (links, head, foot, gear), {@link org.longlow.rider.body.Segment}
 * (mass constants), {@link org.longlow.rider.body.Population} (sampled people, repeatable by seed).
 *
 * <p>Data: ANSUR II public file (US Army, 2012), Gordon et al. 2014, NATICK/TR-15/007. Even the
 * best regression leaves 20 to 25 mm of personal scatter in sitting height and hip height: a fit
 * for one named rider needs that rider's own sitting height, buttock-knee length and arm length.
 *
 * <p>Bad input throws {@link java.lang.IllegalArgumentException}, one line per fault, each naming
 * the value and what is allowed; a value outside the survey's range is only a note.
 */
package org.longlow.rider.body;
