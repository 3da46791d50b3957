package org.rafterbook.review;

import java.util.List;

/**
 * What the sentences about a change need beside its own figures.
 *
 * @param season scatter, trend and slopes
 * @param likeliestBest true where of several changes judged this is the likeliest to have raised the time most
 * @param hardToTell changes of other settings whose effects trade off against this one's
 */
record EffectContext(SeasonFigures season, boolean likeliestBest, List<Pair> hardToTell) {}
