package org.coursewright.exchange.estimate;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.table.Schedule;

/**
 * A row as the element that was made of it.
 *
 * @param place where it stands
 * @param mark of the element
 * @param element of the model
 * @param <E> its type
 */
record Made<E>(Place place, String mark, E element) implements Schedule.Row {
    // a pair that every table is made of
}
