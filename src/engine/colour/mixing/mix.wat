(module
  ;; Predicts the CIELAB of a mix, four bands of the spectrum at a time.
  ;; Memory, single precision, 36 bands a row:
  ;;      0  weights of X, Y, Z: three rows, over the white point
  ;;    432  K and S of the base: two rows
  ;;    720  constants: what the surface reflects (x4)
  ;;    736  the answer: L*, a*, b*
  ;;    768  K and S of each component, two rows each
  (memory (export "memory") 1)

  (func (export "predict")
    (param $p0 i32) (param $p1 i32) (param $p2 i32) (param $p3 i32)
    (param $a0 f32) (param $a1 f32) (param $a2 f32) (param $a3 f32) (param $count i32)
    (local $at i32)
    (local $m0 v128) (local $m1 v128) (local $m2 v128) (local $m3 v128)
    (local $k v128) (local $s v128) (local $x v128) (local $y v128) (local $z v128)
    (local $t v128) (local $root v128)

    (local.set $m0 (f32x4.splat (local.get $a0)))
    (local.set $m1 (f32x4.splat (local.get $a1)))
    (local.set $m2 (f32x4.splat (local.get $a2)))
    (local.set $m3 (f32x4.splat (local.get $a3)))

    (loop $bands
      (local.set $k (v128.load offset=432 (local.get $at)))
      (local.set $s (v128.load offset=576 (local.get $at)))
      (block $mixed
          (local.set $k (f32x4.add (local.get $k)
            (f32x4.mul (local.get $m0) (v128.load (i32.add (local.get $p0) (local.get $at))))))
          (local.set $s (f32x4.add (local.get $s)
            (f32x4.mul (local.get $m0) (v128.load offset=144 (i32.add (local.get $p0) (local.get $at))))))
          (br_if $mixed (i32.lt_u (local.get $count) (i32.const 2)))
          (local.set $k (f32x4.add (local.get $k)
            (f32x4.mul (local.get $m1) (v128.load (i32.add (local.get $p1) (local.get $at))))))
          (local.set $s (f32x4.add (local.get $s)
            (f32x4.mul (local.get $m1) (v128.load offset=144 (i32.add (local.get $p1) (local.get $at))))))
          (br_if $mixed (i32.lt_u (local.get $count) (i32.const 3)))
          (local.set $k (f32x4.add (local.get $k)
            (f32x4.mul (local.get $m2) (v128.load (i32.add (local.get $p2) (local.get $at))))))
          (local.set $s (f32x4.add (local.get $s)
            (f32x4.mul (local.get $m2) (v128.load offset=144 (i32.add (local.get $p2) (local.get $at))))))
          (br_if $mixed (i32.lt_u (local.get $count) (i32.const 4)))
          (local.set $k (f32x4.add (local.get $k)
            (f32x4.mul (local.get $m3) (v128.load (i32.add (local.get $p3) (local.get $at))))))
          (local.set $s (f32x4.add (local.get $s)
            (f32x4.mul (local.get $m3) (v128.load offset=144 (i32.add (local.get $p3) (local.get $at)))))))
      ;; seen = S / (heldBack S + K + root(K (K + 2 S)))
      (local.set $t
        (f32x4.div (local.get $s)
          (f32x4.add
            (f32x4.add (f32x4.mul (v128.const f32x4 0.4 0.4 0.4 0.4) (local.get $s)) (local.get $k))
            (f32x4.sqrt
              (f32x4.mul (local.get $k)
                (f32x4.add (local.get $k) (f32x4.add (local.get $s) (local.get $s))))))))
      (local.set $x (f32x4.add (local.get $x) (f32x4.mul (local.get $t) (v128.load (local.get $at)))))
      (local.set $y (f32x4.add (local.get $y) (f32x4.mul (local.get $t) (v128.load offset=144 (local.get $at)))))
      (local.set $z (f32x4.add (local.get $z) (f32x4.mul (local.get $t) (v128.load offset=288 (local.get $at)))))
      (local.set $at (i32.add (local.get $at) (i32.const 16)))
      (br_if $bands (i32.lt_u (local.get $at) (i32.const 144))))

    ;; Sums of the three rows side by side: X, Y, Z over white.
    (local.set $t
      (f32x4.add
        (i8x16.shuffle 0 1 2 3 16 17 18 19 4 5 6 7 20 21 22 23 (local.get $x) (local.get $y))
        (i8x16.shuffle 8 9 10 11 24 25 26 27 12 13 14 15 28 29 30 31 (local.get $x) (local.get $y))))
    (local.set $z
      (f32x4.add (local.get $z)
        (i8x16.shuffle 8 9 10 11 12 13 14 15 0 1 2 3 4 5 6 7 (local.get $z) (local.get $z))))
    (local.set $t
      (f32x4.add (v128.load offset=720 (i32.const 0))
        (f32x4.add
          (i8x16.shuffle 0 1 2 3 4 5 6 7 16 17 18 19 16 17 18 19 (local.get $t) (local.get $z))
          (i8x16.shuffle 8 9 10 11 12 13 14 15 20 21 22 23 20 21 22 23 (local.get $t) (local.get $z)))))

    ;; Cube root: a third of the exponent, then Halley twice.
    (local.set $root
      (i32x4.add (v128.const i32x4 709921077 709921077 709921077 709921077)
        (i32x4.trunc_sat_f32x4_s
          (f32x4.mul (f32x4.convert_i32x4_s (local.get $t))
            (v128.const f32x4 0.33333334 0.33333334 0.33333334 0.33333334)))))
    (local.set $k (f32x4.mul (local.get $root) (f32x4.mul (local.get $root) (local.get $root))))
    (local.set $root
      (f32x4.mul (local.get $root)
        (f32x4.div
          (f32x4.add (local.get $k) (f32x4.add (local.get $t) (local.get $t)))
          (f32x4.add (local.get $t) (f32x4.add (local.get $k) (local.get $k))))))
    (local.set $k (f32x4.mul (local.get $root) (f32x4.mul (local.get $root) (local.get $root))))
    (local.set $root
      (f32x4.mul (local.get $root)
        (f32x4.div
          (f32x4.add (local.get $k) (f32x4.add (local.get $t) (local.get $t)))
          (f32x4.add (local.get $t) (f32x4.add (local.get $k) (local.get $k))))))
    ;; Below (6/29)^3 CIELAB goes straight.
    (local.set $t
      (v128.bitselect
        (local.get $root)
        (f32x4.add (v128.const f32x4 0.13793103 0.13793103 0.13793103 0.13793103)
          (f32x4.mul (local.get $t) (v128.const f32x4 7.787037 7.787037 7.787037 7.787037)))
        (f32x4.gt (local.get $t) (v128.const f32x4 0.008856452 0.008856452 0.008856452 0.008856452))))

    ;; L* = 116 fy - 16, a* = 500 (fx - fy), b* = 200 (fy - fz).
    (v128.store offset=736 (i32.const 0)
      (f32x4.add (v128.const f32x4 -16 0 0 0)
        (f32x4.mul (v128.const f32x4 116 500 200 0)
          (f32x4.sub
            (i8x16.shuffle 4 5 6 7 0 1 2 3 4 5 6 7 0 1 2 3 (local.get $t) (local.get $t))
            (i8x16.shuffle 16 17 18 19 4 5 6 7 8 9 10 11 0 1 2 3 (local.get $t)
              (v128.const f32x4 0 0 0 0))))))))
