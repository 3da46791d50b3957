/** What screens and commands both do; the only room that joins the logbook's records with the domain. */
@NullMarked
package org.rafterbook.work;

import org.jspecify.annotations.NullMarked;
