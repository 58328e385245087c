/**
 * What riding asks of muscles: torques at the joints from weight, wind and braking ({@link
 * org.longlow.rider.effort.JointTorques}), held against what people can ({@link
 * org.longlow.rider.effort.Strength}) and for how long ({@link
 * org.longlow.rider.effort.Endurance}); and an estimate of what a seat passes on of vibration.
 */
package org.longlow.rider.effort;
