//! Putting lists in order. One sort for all of them: each of the standard library's weighs 4 kB in the download.

use std::cmp::Ordering;

/// The places from 0 to `len` in an order; those that are alike stay as they are.
pub fn places(len: usize, order: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..len).collect();
    places.sort_unstable_by(|a, b| order(*a, *b).then(a.cmp(b)));
    places
}

/// Sorts a list; those that are alike stay in their order.
pub fn sort<T>(list: &mut [T], order: impl Fn(&T, &T) -> Ordering) {
    let places = places(list.len(), &|a, b| match (list.get(a), list.get(b)) {
        (Some(a), Some(b)) => order(a, b),
        _ => Ordering::Equal,
    });
    for to in 0..list.len() {
        let mut from = to;
        loop {
            // What stood there has been swapped on, to where its own place says.
            from = places.get(from).copied().unwrap_or(to);
            if from >= to {
                break;
            }
        }
        list.swap(to, from);
    }
}

#[cfg(test)]
mod tests {
    use super::sort;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn as_the_standard_library_sorts(list in proptest::collection::vec((0..20_u8, any::<u8>()), 0..60)) {
            let (mut ours, mut theirs) = (list.clone(), list);
            sort(&mut ours, |a, b| a.0.cmp(&b.0));
            theirs.sort_by_key(|item| item.0);
            prop_assert_eq!(ours, theirs);
        }
    }
}
