package org.rafterbook.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class OnceEachTest {

    private final OnceEach<String, String> answers = new OnceEach<>(2);

    @Test
    @Timeout(value = 30, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void anotherKeyIsAnsweredWhileTheFirstIsStillComputed() {
        CountDownLatch other = new CountDownLatch(1);
        CompletableFuture<String> slow = CompletableFuture.supplyAsync(() -> answers.of("a", () -> {
            await(other);
            return "A";
        }));
        assertThat(answers.of("b", () -> "B")).isEqualTo("B");
        other.countDown();
        assertThat(slow.join()).isEqualTo("A");
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void twoThreadsThatAskForOneKeyComputeItOnce() {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger computed = new AtomicInteger();
        CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> answers.of("a", () -> {
            begun.countDown();
            await(go);
            computed.incrementAndGet();
            return "A";
        }));
        await(begun);
        assertThat(answers.find("a")).isEmpty();
        CompletableFuture<String> second = CompletableFuture.supplyAsync(() -> answers.of("a", () -> {
            computed.incrementAndGet();
            return "again";
        }));
        go.countDown();
        assertThat(first.join()).isEqualTo("A");
        assertThat(second.join()).isEqualTo("A");
        assertThat(computed).hasValue(1);
        assertThat(answers.find("a")).contains("A");
    }

    @Test
    void whatFailedIsComputedAnew() {
        assertThatThrownBy(() -> answers.of("a", () -> {
                    throw new IllegalStateException("no");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(answers.of("a", () -> "A")).isEqualTo("A");
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void whatAnotherThreadCancelledIsComputedForTheOneThatWaits() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        CompletableFuture<String> first = CompletableFuture.supplyAsync(() -> answers.of("a", () -> {
            begun.countDown();
            await(go);
            throw new CancellationException();
        }));
        await(begun);
        CompletableFuture<String> second = new CompletableFuture<>();
        Thread waiting = new Thread(() -> {
            try {
                second.complete(answers.of("a", () -> "A"));
            } catch (RuntimeException e) {
                second.completeExceptionally(e);
            }
        });
        waiting.start();
        while (waiting.getState() != Thread.State.WAITING) {
            Thread.sleep(1);
        }
        go.countDown();
        assertThat(second.join()).isEqualTo("A");
        assertThatThrownBy(first::join).isInstanceOf(CompletionException.class);
    }

    @Test
    void onlyThoseAskedForLastAreKept() {
        answers.of("a", () -> "A");
        answers.of("b", () -> "B");
        answers.of("a", () -> "again");
        answers.of("c", () -> "C");
        assertThat(answers.find("a")).contains("A");
        assertThat(answers.find("b")).isEmpty();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
