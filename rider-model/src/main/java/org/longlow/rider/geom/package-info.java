/** Points and angles of the side-view plane: x forward, z up, in mm and rad. Depends on nothing. */
package org.longlow.rider.geom;
