package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BackgroundTest {

    /** Writes down what is delivered. */
    private static final class Heard implements Outcome<String> {

        private final List<String> all = Collections.synchronizedList(new ArrayList<>());

        @Override
        public void done(String value) {
            all.add("done " + value);
        }

        @Override
        public void failed(Throwable failure) {
            all.add("failed " + failure.getMessage());
        }

        @Override
        public void cancelled() {
            all.add("cancelled");
        }

        @Override
        public void at(Step step) {
            all.add(step.sentence());
        }
    }

    private final BlockingQueue<Runnable> deliveries = new LinkedBlockingQueue<>();
    private final Heard heard = new Heard();

    private void deliver() throws InterruptedException {
        Runnable next = deliveries.poll(5, TimeUnit.SECONDS);
        assertThat(next).as("delivery").isNotNull();
        run(next);
    }

    private static void run(@Nullable Runnable next) {
        if (next != null) {
            next.run();
        }
    }

    @Test
    void theValueArrivesOnTheGivenExecutor() throws Exception {
        try (Background pool = Background.pool(1)) {
            Running running = pool.submit(progress -> "v13", deliveries::add, heard);
            Runnable delivery = deliveries.poll(5, TimeUnit.SECONDS);
            assertThat(heard.all).isEmpty();
            assertThat(running.ended()).isFalse();
            run(delivery);
            assertThat(heard.all).containsExactly("done v13");
            assertThat(running.ended()).isTrue();
        }
    }

    @Test
    void aFailureArrivesInsteadOfAValue() throws Exception {
        try (Background pool = Background.pool(1)) {
            pool.submit(
                    progress -> {
                        throw new IllegalStateException("no such motor");
                    },
                    deliveries::add,
                    heard);
            deliver();
            assertThat(heard.all).containsExactly("failed no such motor");
        }
    }

    @Test
    void aCancelledJobStopsAtItsNextStep() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        try (Background pool = Background.pool(1)) {
            Running running = pool.submit(
                    progress -> {
                        begun.countDown();
                        goOn.await();
                        progress.step(1, 2, "versions");
                        return "too late";
                    },
                    deliveries::add,
                    heard);
            begun.await();
            running.cancel();
            goOn.countDown();
            deliver();
            assertThat(heard.all).containsExactly("cancelled");
        }
    }

    @Test
    void aValueIsDroppedWhenTheJobWasCancelledBeforeItsDelivery() throws Exception {
        try (Background pool = Background.pool(1)) {
            Running running = pool.submit(progress -> "v13", deliveries::add, heard);
            Runnable delivery = deliveries.poll(5, TimeUnit.SECONDS);
            running.cancel();
            run(delivery);
            assertThat(heard.all).containsExactly("cancelled");
        }
    }

    @Test
    void stepsFasterThanTheirReceiverArePassedOver() throws Exception {
        CountDownLatch stepped = new CountDownLatch(1);
        try (Background pool = Background.pool(1)) {
            pool.submit(
                    progress -> {
                        for (int i = 1; i <= 1000; i++) {
                            progress.step(i, 1000, "flights");
                        }
                        stepped.countDown();
                        return "all";
                    },
                    deliveries::add,
                    heard);
            assertThat(stepped.await(5, TimeUnit.SECONDS)).isTrue();
            deliver();
            deliver();
            assertThat(heard.all).containsExactly("1000 of 1000 flights", "done all");
        }
    }

    @Test
    void onTheSpotEverythingIsDeliveredBeforeSubmitReturns() {
        Running running = Background.onTheSpot()
                .submit(
                        progress -> {
                            progress.step(3, 4, "versions");
                            return "v13";
                        },
                        Runnable::run,
                        heard);
        assertThat(heard.all).containsExactly("3 of 4 versions", "done v13");
        assertThat(running.ended()).isTrue();
    }

    @Test
    void closingCancelsWhatRuns() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        Background pool = Background.pool(1);
        pool.submit(
                progress -> {
                    begun.countDown();
                    while (!progress.cancelled()) {
                        Thread.onSpinWait();
                    }
                    return "stopped";
                },
                deliveries::add,
                heard);
        begun.await();
        pool.close();
        deliver();
        assertThat(heard.all).containsExactly("cancelled");
    }
}
