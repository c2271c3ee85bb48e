//! How long the fuel system takes to judge, natively.

#![allow(missing_docs, reason = "the macros make public functions")]

mod case;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};

fn headroom(criterion: &mut Criterion) {
    let (document, printer) = case::hardware();
    let Some(asked) = case::asked(&document, &printer) else { return };
    let shares = case::shares();
    criterion.bench_function("headroom", |bencher| {
        bencher.iter(|| case::sweep(black_box(&asked), &shares));
    });
    criterion.bench_function("headroom as typed", |bencher| {
        bencher.iter(|| case::answer(black_box(&document), &printer));
    });
}

criterion_group!(benches, headroom);
criterion_main!(benches);
