package org.rafterbook.work;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Answers by key, each computed once however many threads ask for it at a time; who asks for another key does not wait. Keeps
 * those asked for last.
 */
final class OnceEach<K, V> {

    private final Map<K, CompletableFuture<V>> answers;

    /** @param most how many answers are kept */
    OnceEach(int most) {
        answers = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, CompletableFuture<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** The answer to a key; a computation that failed or was cancelled elsewhere is tried again here. */
    V of(K key, Supplier<V> compute) {
        while (true) {
            CompletableFuture<V> mine = new CompletableFuture<>();
            CompletableFuture<V> there = claim(key, mine);
            if (there == null) {
                return computed(key, mine, compute);
            }
            try {
                return there.join();
            } catch (CompletionException | CancellationException e) {
                forget(key, there);
            }
        }
    }

    /** The answer to a key where it is known already. */
    synchronized Optional<V> find(K key) {
        CompletableFuture<V> there = answers.get(key);
        return there == null || !there.isDone() || there.isCompletedExceptionally()
                ? Optional.empty()
                : Optional.of(there.join());
    }

    private V computed(K key, CompletableFuture<V> mine, Supplier<V> compute) {
        try {
            V answer = compute.get();
            mine.complete(answer);
            return answer;
        } catch (RuntimeException | Error e) {
            forget(key, mine);
            mine.completeExceptionally(e);
            throw e;
        }
    }

    private synchronized @Nullable CompletableFuture<V> claim(K key, CompletableFuture<V> mine) {
        return answers.putIfAbsent(key, mine);
    }

    private synchronized void forget(K key, CompletableFuture<V> failed) {
        answers.remove(key, failed);
    }
}
