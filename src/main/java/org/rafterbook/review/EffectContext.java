package org.rafterbook.review;

import java.util.List;

/**
 * What the sentences about a change need beside its own figures.
 *
 * @param season scatter, trend and slopes
 * @param onOneDay true where the effect can be told with every day's own level taken out
 * @param hardToTell changes of other settings whose effects trade off against this one's
 */
record EffectContext(SeasonFigures season, boolean onOneDay, List<Pair> hardToTell) {}
