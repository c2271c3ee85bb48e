//! How long trips of twelve stops take to plan, natively.

#![allow(missing_docs, reason = "the macros make public functions")]

mod case;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};

fn trip(criterion: &mut Criterion) {
    let (Some(plain), Some(with_fee)) = (case::trips(false), case::trips(true)) else { return };
    criterion.bench_function("trip first plan", |bencher| {
        bencher.iter(|| case::first_plans(black_box(&plain)));
    });
    let mut slow = criterion.benchmark_group("trip certificate");
    slow.sample_size(10);
    slow.bench_function("without fee", |bencher| {
        bencher.iter(|| case::certificates(black_box(&plain)));
    });
    slow.bench_function("with fee", |bencher| {
        bencher.iter(|| case::certificates(black_box(&with_fee)));
    });
    slow.finish();
}

criterion_group!(benches, trip);
criterion_main!(benches);
