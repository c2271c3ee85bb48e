//! How long the replay of a long log takes, natively.

#![allow(missing_docs, reason = "the macros make public functions")]

mod case;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};

fn replay(criterion: &mut Criterion) {
    let Ok(log) = case::log() else { return };
    criterion.bench_function("replay", |bencher| {
        bencher.iter(|| case::replay(black_box(&log)));
    });
    criterion.bench_function("replay with chart", |bencher| {
        bencher.iter(|| case::replay_with_chart(black_box(&log)));
    });
    criterion.bench_function("replay as typed", |bencher| {
        bencher.iter(|| case::replay_as_typed(black_box(&log)));
    });
}

criterion_group!(benches, replay);
criterion_main!(benches);
