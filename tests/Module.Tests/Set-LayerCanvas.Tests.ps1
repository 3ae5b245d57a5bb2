BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Set-LayerCanvas' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture ag-resources (Join-Path $TestDrive 'hero.psd'))
    }

    It 'moves pixels and guides together' {
        $before = $file | Get-Layer -Leaf | ForEach-Object { "$($_.Left + 3) $($_.Top - 2)" }
        $guides = $file.Guides | ForEach-Object { $_.Position + $(if ($_.IsVertical) { 3 } else { -2 }) }
        $file | Set-LayerCanvas -Shift 3, -2 > $null
        $file | Get-Layer -Leaf | ForEach-Object { "$($_.Left) $($_.Top)" } | Should -Be $before
        $guides | Should -Not -BeNullOrEmpty
        $file.Guides.Position | Should -Be $guides
    }

    It 'changes the size, lives through a save, and warns about an odd width' {
        $result = Get-Streams { $file | Set-LayerCanvas -Width 41 -Height 50 | Save-LayerFile -InPlace }
        $result.Errors | Should -BeNullOrEmpty
        $result.Warnings -like '*odd*' | Should -HaveCount 1
        $saved = Get-LayerFile $file.Path
        "$($saved.Width) $($saved.Height) $($saved.Axis)" | Should -Be '41 50 20.5'
    }

    It 'centres on a line, and refuses half a pixel' {
        $left = ($file | Get-Layer -LayerNumber 1).Left
        $file | Set-LayerCanvas -CenterOn 12 > $null
        ($file | Get-Layer -LayerNumber 1).Left | Should -Be ($left + 4)
        $result = Get-Streams { $file | Set-LayerCanvas -CenterOn 12.5 }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0] | Should -BeLike '*width of 33 or 31 px*'
    }

    It 'refuses parts of a pixel instead of rounding them' {
        { $file | Set-LayerCanvas -Shift 1.5, 2 } | Should -Throw '*whole numbers of pixels*'
        $file.PendingCount | Should -Be 0
    }

    It 'takes layers for their file' {
        ($file | Get-Layer | Set-LayerCanvas -Height 40).Count | Should -Be $file.LayerCount
        $file.Height | Should -Be 40
    }

    It 'needs something to change, and not both a shift and a line' {
        { $file | Set-LayerCanvas } | Should -Throw '*-Width, -Height, -Shift or -CenterOn*'
        { $file | Set-LayerCanvas -Shift 1, 1 -CenterOn 3 } | Should -Throw
        { $file | Set-LayerCanvas -Shift 1 } | Should -Throw
    }

    It 'changes nothing with -WhatIf, and refuses all the same' {
        ($file | Set-LayerCanvas -Width 40 -WhatIf).Width | Should -Be 32
        (Get-Streams { $file | Set-LayerCanvas -Width 40000 -WhatIf }).Errors.Count | Should -Be 1
    }
}
