/**
 * Arranges what a sheet shows on pages. Start with {@link org.coursewright.exchange.sheet.layout.SheetLayout}.
 *
 * <p>Positions of masonry stay exact until they are put on paper; on paper everything is in millimetres.
 */
package org.coursewright.exchange.sheet.layout;
