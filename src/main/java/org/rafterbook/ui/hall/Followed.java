package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.util.Subscription;

/** What the Hall's views follow: only while they are on show, so that a view that is replaced leaves nothing behind. */
final class Followed {

    private final List<Supplier<Subscription>> all = new ArrayList<>();
    private Subscription now = Subscription.EMPTY;
    private boolean attached;

    /** The taker gets the value as it is when the views come on show, and each later one. */
    <T> void follow(ObservableValue<T> value, Consumer<? super T> taker) {
        Supplier<Subscription> one = () -> value.subscribe(taker::accept);
        all.add(one);
        if (attached) {
            now = now.and(one.get());
        }
    }

    void attach() {
        if (!attached) {
            attached = true;
            for (Supplier<Subscription> one : all) {
                now = now.and(one.get());
            }
        }
    }

    void detach() {
        attached = false;
        now.unsubscribe();
        now = Subscription.EMPTY;
    }
}
