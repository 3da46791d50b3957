/** What flies: models, parts, settings, versions, riggings, surfaces and planforms, masses and balance. */
@NullMarked
package org.rafterbook.airframe;

import org.jspecify.annotations.NullMarked;
