/**
 * The shipped machines: invented layouts that show what a file can say, each with a crew of two.
 *
 * <p>Their notes tell who builds them, what for, and what is still wrong; a test holds each to its
 * notes.
 */
package org.longlow.demo;
