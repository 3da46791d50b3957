/** Airframe sheets, CSV in and out, printable sheets and reports. */
@NullMarked
package org.rafterbook.exchange;

import org.jspecify.annotations.NullMarked;
