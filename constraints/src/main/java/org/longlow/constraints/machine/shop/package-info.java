/** Bends and copes of tube, folds, cutting plans: figures for the workshop. */
package org.longlow.constraints.machine.shop;
