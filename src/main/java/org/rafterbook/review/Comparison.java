package org.rafterbook.review;

import org.rafterbook.units.Worded;

/** How far two values of a setting were compared. */
public enum Comparison implements Worded {
    /** Their difference can be told with every day's own level taken out. */
    SAME_DAY,
    /** It can be told only by comparing days with days. */
    ACROSS_DAYS,
    /** Something else always changed with them; only the joint effect can be told, if that. */
    MOVED_TOGETHER,
    /** One of them has no clean flight. */
    ONE_SIDE_UNFLOWN;

    @Override
    public String word() {
        return Worded.super.word().replace('-', ' ');
    }
}
