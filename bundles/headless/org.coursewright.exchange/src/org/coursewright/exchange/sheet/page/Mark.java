package org.coursewright.exchange.sheet.page;

/** One thing drawn on a page; later marks lie over earlier ones. */
public sealed interface Mark permits Stroke, Shape, Label {
    // what a mark is follows from its type alone
}
