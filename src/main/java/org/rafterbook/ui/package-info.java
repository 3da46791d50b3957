/** The window: shell, places, shared controls and charts. */
@NullMarked
package org.rafterbook.ui;

import org.jspecify.annotations.NullMarked;
