//! How long a full fill solution takes, natively.

#![allow(missing_docs, reason = "the macros make public functions")]

mod case;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};

fn full_solution(criterion: &mut Criterion) {
    let Ok(problem) = case::problem() else { return };
    criterion.bench_function("full fill solution", |bencher| {
        bencher.iter(|| case::solve(black_box(&problem)));
    });
}

criterion_group!(benches, full_solution);
criterion_main!(benches);
