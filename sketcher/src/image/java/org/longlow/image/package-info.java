/**
 * Makes the image of the program that a builder without Java and Maven can start. Works in profile
 * {@code app} alone, from the jars that were built before it; no part of the program.
 */
package org.longlow.image;
