/** What a shop buys and cuts: pieces, cutting plans, lists, the page for weighing. */
package org.longlow.sketcher.shop;
