BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Resize-LayerFile' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture ag-resources (Join-Path $TestDrive 'hero.psd'))
    }

    It 'scales canvas, parts and guides, and lives through a save' {
        $guides = $file.Guides | ForEach-Object { $_.Position * 2 }
        $widths = $file | Get-Layer -Leaf | ForEach-Object { $_.Width * 2 }
        $result = Get-Streams { $file | Resize-LayerFile 200 | Save-LayerFile -Destination (Join-Path $TestDrive 'large.psd') }
        $result.Errors | Should -BeNullOrEmpty
        $saved = Get-LayerFile (Join-Path $TestDrive 'large.psd')
        "$($saved.Width) $($saved.Height)" | Should -Be '64 64'
        $saved.Guides.Position | Should -Be $guides
        $saved | Get-Layer -Leaf | ForEach-Object Width | Should -Be $widths
        $saved.Ppi | Should -Be (Get-LayerFile $file.Path).Ppi
    }

    It 'takes a width or a height, and scales the resolution on demand' {
        $ppi = $file.Ppi
        ($file | Resize-LayerFile -Width 16 -ScalePpi).Ppi | Should -Be ($ppi / 2)
        $file.Height | Should -Be 16
        ($file | Resize-LayerFile -Height 32 -Filter Area).Width | Should -Be 32
    }

    It 'refuses an odd width and tells which would do' {
        $result = Get-Streams { $file | Resize-LayerFile -Width 17 }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0] | Should -BeLike '*not even*18 px*'
    }

    It 'changes nothing with -WhatIf' {
        ($file | Resize-LayerFile -Percent 50 -WhatIf).PendingCount | Should -Be 0
        $file.Width | Should -Be 32
    }

    It 'takes layers for their file' {
        ($file | Get-Layer | Resize-LayerFile -Percent 50).Count | Should -Be $file.LayerCount
        $file.Width | Should -Be 16
    }

    It 'needs exactly one size within its range' {
        { $file | Resize-LayerFile -Percent 50 -Width 16 } | Should -Throw
        { $file | Resize-LayerFile -Percent 0 } | Should -Throw
    }
}
