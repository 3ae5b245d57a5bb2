BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Copy-LayerMirror' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'reflects every left part without an opposite, swapping names all the way down' {
        $out = $file | Copy-LayerMirror
        [object]::ReferenceEquals($out, $file) | Should -BeTrue
        ($file | Get-Layer -Side Right).LayerPath | Should -Be 'Figure/Arm R', 'Figure/Arm R/Arm R', 'Figure/Head/Eye R', 'Figure/Head/Eye R/Eye R'
        $left = $file | Get-Layer -LiteralLayerPath 'Figure/Arm L/Arm L'
        $right = $file | Get-Layer -LiteralLayerPath 'Figure/Arm R/Arm R'
        $left.Left + $right.Left + $right.Width | Should -Be (2 * $file.Axis)
        $right.Left + $left.Left + $left.Width | Should -Be (2 * $file.Axis)
        $right.Top | Should -Be $left.Top
    }

    It 'lives through a save' {
        $file | Copy-LayerMirror | Save-LayerFile -InPlace > $null
        (Get-Layer $file.Path -Side Right).Count | Should -Be 4
    }

    It 'passes the reflections of layers on' {
        $out = $file | Get-Layer -LiteralLayerPath 'Figure/Head/Eye L' | Copy-LayerMirror
        $out.LayerPath | Should -Be 'Figure/Head/Eye R'
    }

    It 'chooses layers, the axis and the side' {
        $file | Copy-LayerMirror -LayerPath 'Figure/Head/*' -Axis 16.5 > $null
        $left = $file | Get-Layer -LiteralLayerPath 'Figure/Head/Eye L/Eye L'
        $right = $file | Get-Layer -LiteralLayerPath 'Figure/Head/Eye R/Eye R'
        $left.Left + $right.Left + $right.Width | Should -Be 33
        ($file | Get-Layer -Name 'Arm R') | Should -BeNullOrEmpty
        ($file | Copy-LayerMirror -From Right -WarningAction SilentlyContinue | Get-Layer -Side Left).Count | Should -Be 4
    }

    It 'leaves, replaces or refuses parts whose opposite is there' {
        $file | Copy-LayerMirror | Set-Layer -Side Right -Mark Green > $null
        $pending = $file.PendingCount
        ($file | Copy-LayerMirror -Existing Skip).PendingCount | Should -Be $pending
        (Get-Streams { $file | Copy-LayerMirror -Existing Error }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'EditRefused,*'
        $file | Copy-LayerMirror -Existing Replace -Name 'Arm L' > $null
        ($file | Get-Layer -LiteralLayerPath 'Figure/Arm R/Arm R').Mark | Should -Be 'None'
        $file.LayerCount | Should -Be 12
    }

    It 'refuses an axis between half pixels' {
        $result = Get-Streams { $file | Copy-LayerMirror -Axis 16.25 }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0] | Should -BeLike '*multiple of 0.5*'
    }

    It 'changes nothing with -WhatIf and passes its input on' {
        ($file | Copy-LayerMirror -WhatIf).LayerCount | Should -Be 8
        ($file | Get-Layer -LayerNumber 2 | Copy-LayerMirror -WhatIf).Name | Should -Be 'Arm L'
    }
}
