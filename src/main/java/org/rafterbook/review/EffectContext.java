package org.rafterbook.review;

import java.util.List;

/**
 * What the sentences about a change need beside its own figures.
 *
 * @param season scatter, trend and slopes
 * @param hardToTell changes of other settings whose effects trade off against this one's
 */
record EffectContext(SeasonFigures season, List<Pair> hardToTell) {}
