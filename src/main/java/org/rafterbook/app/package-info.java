/** Composition root, launcher and command line. */
@NullMarked
package org.rafterbook.app;

import org.jspecify.annotations.NullMarked;
