/**
 * Photos to draw over: read within bounds, laid flat, put in place. Knows layouts and files, no
 * window.
 */
package org.longlow.sketcher.photo;
