package org.rafterbook.ui.hall;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/** What the Hall's views follow: only while they are on show, so that a view that is replaced leaves nothing behind. */
final class Followed {

    private final List<One<?>> all = new ArrayList<>();
    private boolean attached;

    private static final class One<T> {

        private final ObservableValue<T> value;
        private final Consumer<? super T> taker;
        private Subscription now = Subscription.EMPTY;
        private @Nullable T seen;
        private boolean told;

        private One(ObservableValue<T> value, Consumer<? super T> taker) {
            this.value = value;
            this.taker = taker;
        }

        /** What has not changed meanwhile is not told again. */
        private void attach() {
            T here = value.getValue();
            if (!told || !Objects.equals(seen, here)) {
                tell(here);
            }
            now = value.subscribe((before, next) -> tell(next));
        }

        private void tell(T here) {
            told = true;
            seen = here;
            taker.accept(here);
        }
    }

    /** The taker gets the value as it is when the views come on show, and each later one. */
    <T> void follow(ObservableValue<T> value, Consumer<? super T> taker) {
        One<T> one = new One<>(value, taker);
        all.add(one);
        if (attached) {
            one.attach();
        }
    }

    void attach() {
        if (!attached) {
            attached = true;
            List.copyOf(all).forEach(One::attach);
        }
    }

    void detach() {
        attached = false;
        all.forEach(one -> one.now.unsubscribe());
    }
}
