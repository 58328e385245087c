/** Bends and copes of tube: figures for the workshop. */
package org.longlow.constraints.machine.shop;
