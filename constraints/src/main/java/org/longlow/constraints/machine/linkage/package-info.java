/** Motions of rigid bodies in the elevation: hinges and four-bar linkages. */
package org.longlow.constraints.machine.linkage;
