#pragma once
// SCUPPER_WIDE before a function: compiled several times where the compiler can, for processors with
// wider vectors and for all others. No operation is fused with another (-ffp-contract=off), so that
// the bits are the same.

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) &&                             \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#if __GNUC__ >= 12
#define SCUPPER_WIDE __attribute__((target_clones("arch=x86-64-v4", "avx2", "default")))
#else
#define SCUPPER_WIDE __attribute__((target_clones("avx2", "default")))
#endif
#else
#define SCUPPER_WIDE
#endif
