package org.coursewright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

import javax.management.ListenerNotFoundException;
import javax.management.Notification;
import javax.management.NotificationEmitter;
import javax.management.NotificationListener;
import javax.management.openmbean.CompositeData;

import com.sun.management.GarbageCollectionNotificationInfo;

/**
 * Watches how much of the heap is in use after every garbage collection while it is open. Garbage that has outlived a
 * few collections counts until a full one, so what it says is rather too much than too little.
 */
final class HeapWatch implements AutoCloseable {

    private final AtomicLong most = new AtomicLong();
    private final NotificationListener listener = (notification, handback) -> collected(notification);
    private final long before;

    private HeapWatch() {
        System.gc();
        before = used();
    }

    static HeapWatch start() {
        HeapWatch watch = new HeapWatch();
        collectors().forEach(collector -> collector.addNotificationListener(watch.listener, null, null));
        return watch;
    }

    private static Iterable<NotificationEmitter> collectors() {
        return ManagementFactory.getGarbageCollectorMXBeans().stream().filter(NotificationEmitter.class::isInstance)
                .map(NotificationEmitter.class::cast).toList();
    }

    private static long used() {
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private void collected(Notification notification) {
        if (GarbageCollectionNotificationInfo.GARBAGE_COLLECTION_NOTIFICATION.equals(notification.getType())) {
            GarbageCollectionNotificationInfo info = GarbageCollectionNotificationInfo
                    .from((CompositeData) notification.getUserData());
            Map<String, MemoryUsage> after = info.getGcInfo().getMemoryUsageAfterGc();
            long sum = after.entrySet().stream().filter(pool -> isHeap(pool.getKey()))
                    .mapToLong(pool -> pool.getValue().getUsed()).sum();
            most.accumulateAndGet(sum, Math::max);
        }
    }

    private static boolean isHeap(String pool) {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .anyMatch(bean -> bean.getName().equals(pool)
                        && bean.getType() == MemoryType.HEAP);
    }

    /** @return the most in use after a collection, one made now included, less what was before (MB) */
    double most() {
        System.gc();
        return (Math.max(most.get(), used()) - before) / 1e6;
    }

    @Override
    public void close() {
        for (NotificationEmitter collector : collectors()) {
            try {
                collector.removeNotificationListener(listener);
            } catch (ListenerNotFoundException e) {
                throw new IllegalStateException("The heap was watched without a listener.", e);
            }
        }
    }
}
